//# allFunctionsCalledOnLoad
var o=e=>e.target.closest("dialog").close();function a(e){e.open=!1,e.querySelector("summary").focus({preventScroll:!0})}function l(e){let t=e.currentTarget;e.relatedTarget&&!t.contains(e.relatedTarget)&&(t.open=!1)}export{o as a,a as b,l as c};
